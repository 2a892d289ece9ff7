"""Manchet: a plain-text formula language for bread, and its compiler."""

__version__ = "0.1.0"
