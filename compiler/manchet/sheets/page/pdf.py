"""The PDF of a page: tagged, with its fonts inside, the same bytes every time. The only module that knows WeasyPrint."""

from __future__ import annotations

import contextlib
import os
import sys
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from manchet.records import NamedTuple

if TYPE_CHECKING:
    import logging

INSTALL = {
    "linux": "apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0",
    "darwin": "brew install pango",
    "win32": "install MSYS2, then: pacman -S mingw-w64-x86_64-pango",
}
"""What brings Pango to a machine, as WeasyPrint's own documentation has it."""

FACES = (("SourceSansPro-Regular.ttf", 400), ("SourceSansPro-Bold.ttf", 700))

_MISSING = ".notdef glyph rendered"


class Pdf(NamedTuple):
    """The file, and what is not as it should be on it."""

    content: bytes
    missing: tuple[str, ...] = ()
    """Characters that the fonts do not have, each once, in the order they turn up."""
    faults: tuple[str, ...] = ()
    """What the layout engine complained of: our own mistakes in style or template."""


class NoPdf(NamedTuple):
    """Why there is none, and what to install."""

    reason: str
    install: str


class _Engine(NamedTuple):
    weasyprint: Any
    fonts: Any
    style: Any
    fetch: Any
    refused: Any
    """What the fetcher raises: not an Exception, so that WeasyPrint does not swallow it."""


_engine: _Engine | NoPdf | None = None


@contextlib.contextmanager
def _quiet_import() -> Iterator[None]:
    """While WeasyPrint is imported: our fonts only, nothing on stdout, and on Linux no search by fifty processes.

    cffi asks `ctypes.util.find_library` for each spelling of each library's name, and on Linux each question starts
    a compiler and a linker. The last spelling is the one the loader knows anyway, so the questions are answered "no".
    """
    import ctypes.util
    import warnings

    os.environ.setdefault("SOURCE_DATE_EPOCH", "0")
    os.environ["FONTCONFIG_FILE"] = os.path.join(os.path.dirname(__file__), "fonts.conf")
    search = ctypes.util.find_library
    if sys.platform == "linux":
        ctypes.util.find_library = lambda name: None
    try:
        with (
            open(os.devnull, "w") as nowhere,
            contextlib.redirect_stdout(nowhere),
            warnings.catch_warnings(),
        ):
            warnings.simplefilter("ignore")  # that the machine's fonts are not there is what we want
            yield
    finally:
        ctypes.util.find_library = search


def _import_engine() -> Any:
    """WeasyPrint itself, and the two parts of it that are used beside. Raises OSError where Pango is missing."""
    with _quiet_import():
        import weasyprint  # type: ignore[import-untyped]
        from weasyprint.text.fonts import FontConfiguration  # type: ignore[import-untyped]
        from weasyprint.urls import FatalURLFetchingError, URLFetcher  # type: ignore[import-untyped]
    return weasyprint, FontConfiguration, FatalURLFetchingError, URLFetcher


def _start() -> _Engine | NoPdf:
    try:
        weasyprint, FontConfiguration, FatalURLFetchingError, URLFetcher = _import_engine()
    except OSError as missing:
        return NoPdf(str(missing).partition("\n")[0].strip(), INSTALL.get(sys.platform, INSTALL["linux"]))
    from pathlib import Path

    import font_source_sans_pro  # type: ignore[import-untyped]

    folder = os.path.realpath(font_source_sans_pro.font_directory)

    class OwnFontsOnly(URLFetcher):  # type: ignore[valid-type, misc]
        """Reads our fonts and what the page itself holds, and refuses everything else, aloud: a sheet has no reason to ask."""

        def fetch(self, url: str, headers: Any = None) -> Any:
            from urllib.request import url2pathname

            if url.startswith("data:image/"):  # a picture that is already inside the page
                return super().fetch(url, headers)
            if url.startswith("file:"):
                path = os.path.realpath(url2pathname(url.removeprefix("file://")))
                if os.path.dirname(path) == folder:
                    return super().fetch(url, headers)
            raise FatalURLFetchingError(f"a sheet asked for {url}")

    fetch = OwnFontsOnly(allowed_protocols={"file", "data"}, allow_redirects=False)
    fonts = FontConfiguration()

    faces = "".join(
        f'@font-face {{ font-family: "Source Sans"; font-weight: {weight};'
        f' src: url("{Path(folder, file).as_uri()}"); }}\n'
        for file, weight in FACES
    )
    style = weasyprint.CSS(string=faces, font_config=fonts, url_fetcher=fetch)
    return _Engine(weasyprint, fonts, style, fetch, FatalURLFetchingError)


def engine() -> _Engine | NoPdf:
    """The layout engine, started at the first call; or why it cannot be."""
    global _engine
    if _engine is None:
        _engine = _start()
    return _engine


@contextlib.contextmanager
def _complaints() -> Iterator[list[str]]:
    """Collect what WeasyPrint logs, which is its only way of saying that a character or an option is unknown to it."""
    import logging

    said: list[str] = []

    class Ear(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            said.append(record.getMessage())

    logger = logging.getLogger("weasyprint")
    ear, before, level = Ear(logging.WARNING), list(logger.handlers), logger.level
    logger.handlers, logger.propagate = [ear], False
    logger.setLevel(logging.WARNING)
    try:
        yield said
    finally:
        logger.handlers, logger.propagate = before, True
        logger.setLevel(level)


def pdf_of(html: str) -> Pdf | NoPdf:
    """The PDF of one of our own pages (never of a stranger's HTML). A page that asks for a file is a RuntimeError."""
    with _complaints() as said:
        started = engine()
        if isinstance(started, NoPdf):
            return started
        page = started.weasyprint.HTML(string=html, url_fetcher=started.fetch)
        try:
            content = page.write_pdf(stylesheets=[started.style], font_config=started.fonts, pdf_variant="pdf/ua-1")
        except started.refused as asked:
            raise RuntimeError(str(asked)) from None
    missing: list[str] = []
    faults: list[str] = []
    for line in said:
        if line.startswith(_MISSING):
            character = line.split('"')[1] if line.count('"') == 2 else '"'
            if character not in missing:
                missing.append(character)
        elif "HarfBuzz" not in line:
            faults.append(line)
    return Pdf(content, tuple(missing), tuple(faults))
