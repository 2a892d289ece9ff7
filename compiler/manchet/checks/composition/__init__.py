"""What the dough is made of: salt, water, yeast, raising agents, lye, malt, and whether it is the bread it says it is."""
