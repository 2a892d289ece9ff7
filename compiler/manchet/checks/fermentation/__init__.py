"""Yeast, time and warmth of a dough, and steps that take far longer or shorter than such a step can."""
