"""When two ways of saying what is made mean the same pieces."""

from __future__ import annotations

from manchet.diagnostics.suggest import fold


def same_noun(a: str, b: str) -> bool:
    """`roll` and `rolls`, `loaf` and `loaves`, `batch` and `batches` are one noun."""
    return singular(fold(a)) == singular(fold(b))


def singular(noun: str) -> str:
    """`loaf` for `loaves`, `roll` for `rolls`; what is not a plural stays as it is."""
    if noun.endswith("ves"):
        return noun[:-3] + "f"
    if noun.endswith(("ches", "shes", "xes", "sses")):
        return noun[:-2]
    return noun[:-1] if noun.endswith("s") and not noun.endswith("ss") else noun
