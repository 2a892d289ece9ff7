"""What several forms show: a weighing, a step, a caution, the foot, what was swapped."""
