"""A plan by CP-SAT, the constraint solver of OR-Tools: an extra of the package, imported only by whoever plans with it.

`search.py` is the way in. `whole.py` makes the model of a day, a module a topic; `aims.py` has its goals;
`again.py` is the way in where a day is planned again.
"""
