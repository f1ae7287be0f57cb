"""The bill in the document: what it takes into account, and its lines as last written.

Like the cut layout it is written when asked, and otherwise only says that it is out of
date: its texts would slow every recompute down.
"""

from __future__ import annotations

import hashlib
from dataclasses import replace
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.model.base import Scripted
from closetbench.model.bridge import catalogue_of, closet_of, format_of
from closetbench.model.layout import cutting_of
from closetbench.model.properties import (
    BOOL,
    FLOAT,
    INTEGER,
    LENGTH,
    LINK,
    STRING,
    TEXTS,
    Prop,
    put,
    result,
)
from closetbench.shop.bill import Bill as Lines
from closetbench.shop.bill import bill_rows, closet_bill
from closetbench.shop.buying import BAND_WASTE
from closetbench.shop.csv_text import csv_field
from closetbench.stock.purchase import SpareRule

OWN = (
    Prop("Closet", LINK, "Bill", "The closet that the bill is for"),
    Prop("Layout", LINK, "Bill", "The cut layout whose sheets are bought; none: not planned yet"),
    Prop("RouterBit", LENGTH, "Bill", "Diameter of the router bit at hand; 0: not said"),
    Prop("BandWaste", FLOAT, "Bill", "Edge band bought over the length of the rims, as a fraction",
         initial=BAND_WASTE),
    Prop("SparePer", INTEGER, "Bill",
         "One sheet to spare for each so many of a material; 0: none to spare"),
    Prop("SpareAbove", INTEGER, "Bill", "Sheets of a material up to which none is to spare",
         initial=SpareRule().above),
    Prop("Update", BOOL, "Bill", "Set it to write the bill again in the next recompute",
         initial=True),
)
RESULTS = (
    result("Cost", FLOAT, "Sum of what has a price, in the catalogue's currency"),
    result("Currency", STRING, "The catalogue's currency"),
    result("Unpriced", BOOL, "Whether something to be bought has no price"),
    result("OutOfDate", BOOL, "The design, the layout or the catalogue has changed since"),
    result("Lines", TEXTS, "The bill, a line of comma-separated values each"),
    result("WrittenFor", STRING, "What the bill was written for", hidden=True),
)


class Bill(Scripted):
    """Proxy of a bill."""

    properties = (*OWN, *RESULTS)

    def work_out(self, obj: Any) -> None:
        """Write the bill if asked, else see whether it still says what the design says."""
        bill = bill_of(obj)
        mark = hashlib.md5(repr(bill).encode(), usedforsecurity=False).hexdigest()
        if obj.Update:
            purchases = bill.purchases()
            put(obj, "Cost", sum(p.total or 0.0 for p in purchases))
            put(obj, "Unpriced", any(p.total is None for p in purchases))
            put(obj, "Currency", bill.catalogue.currency)
            put(obj, "Lines", [",".join(map(csv_field, row)) for row in bill_rows(bill)])
            put(obj, "WrittenFor", mark)
            put(obj, "Update", False)
        put(obj, "OutOfDate", obj.WrittenFor != mark)


def bill_of(obj: Any) -> Lines:
    """The bill as its properties and its closet say; ``ClosetError`` if that is not built."""
    if obj.Closet is None:
        raise ClosetError(obj.Label, "closet", "none", "link the closet that the bill is for")
    closet = closet_of(obj.Closet)
    cutting = cutting_of(obj.Layout) if obj.Layout is not None else None
    bill = closet_bill(
        closet, cutting.sheets if cutting else None, catalogue_of(obj.Closet),
        format_of(obj.Closet), obj.RouterBit.Value or None, cutting.lengths if cutting else None,
    )
    return replace(
        bill, band_waste=obj.BandWaste, spare=SpareRule(obj.SparePer, obj.SpareAbove),
        ways=cutting.ways if cutting else (),
    )
