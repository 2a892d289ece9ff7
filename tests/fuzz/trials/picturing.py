from __future__ import annotations

import random

from fuzz.odd_pictures import any_picture

from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.workspace.picture_file import SafePicture, safe_picture

PAGE = '<html lang="en"><head><title>x</title></head><body class="sheet"><figure><img alt="cut" src="{}"></figure></body></html>'


def picturing(text: str, rng: random.Random) -> None:
    """Whatever a picture's file holds, it is refused in words, or the page it stands on is printed and asks for nothing."""
    found = safe_picture(any_picture(rng))
    if isinstance(found, SafePicture):
        printed = pdf_of(PAGE.format(found.address))
        assert isinstance(printed, Pdf) and printed.content.startswith(b"%PDF"), printed
        assert set(printed.undrawn) <= {found.address}, printed.undrawn
