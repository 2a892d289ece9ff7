"""From the dough to its pieces: their weight, their tins and places, and what is left of the dough."""
