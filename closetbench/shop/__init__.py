"""Documents for the shop: drawings, pictures and the bill, written whole or not at all."""
