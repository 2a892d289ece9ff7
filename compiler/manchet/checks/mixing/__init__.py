"""What the mixer takes, how fast and how long it runs, and what goes into it first."""
