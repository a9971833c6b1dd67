"""Where on a storey a device put there would be carried: places of a grid against stations."""
