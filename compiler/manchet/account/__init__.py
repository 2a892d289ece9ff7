"""One account of every gram: what is in each sold piece, from the scale to the shelf."""
