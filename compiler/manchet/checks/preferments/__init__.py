"""Levains, sours, poolish, biga, scalds: what they are made of, how ripe they are, what they bring."""
