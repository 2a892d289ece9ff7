"""What goes wrong in the oven and in the fryer: heat, time, core, steam, and how much goes in."""
