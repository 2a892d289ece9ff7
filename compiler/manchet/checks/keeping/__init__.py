"""Cooling, keeping cold, and how long a thing is good for."""
