"""Every printed form, in its place: what stands as a folder in `forms` is a form."""

from __future__ import annotations

from importlib import import_module
from pkgutil import iter_modules

from manchet.sheets import forms
from manchet.sheets.form import Form, Subject
from manchet.sheets.page.view import View


def _find_forms() -> list[Form]:
    return [import_module(f"{forms.__name__}.{folder.name}").FORM for folder in iter_modules(forms.__path__)]


FORMS = tuple(sorted(_find_forms(), key=lambda form: form.place))


def forms_about(what: Subject) -> tuple[Form, ...]:
    return tuple(form for form in FORMS if form.about is what)


def form_called(name: str) -> Form:
    """Raises StopIteration where there is none."""
    return next(form for form in FORMS if form.name == name)


def html_of(view: View) -> str:
    """The page of a view, in the form that it says it has."""
    from manchet.sheets.page.html import html_page

    form = form_called(view.form)
    landscape = form.landscape or bool(getattr(view, "landscape", False))
    return html_page(view, form.template, landscape, form.layouts[0].name)
