"""How warm the mix comes out, and whether water, ice and the room can make it so."""
