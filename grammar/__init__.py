"""The grammar of the formula language, as data: the lark grammar, its tables, and the reference page."""
