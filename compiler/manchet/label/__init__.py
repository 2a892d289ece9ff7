"""What the law asks of a food that is sold: its ingredients, its allergens, its nutrition. Values, of which labels are made.

A draft for a competent person: nothing here says that a food is safe, or free from anything.
"""
