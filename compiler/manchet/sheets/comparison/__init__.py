"""The page that says what of a bread is otherwise: no form, for nobody works from it. One column, the figure of now with the one before
it small beside it."""
