"""What to buy and how to cut it: pure functions over core values."""
