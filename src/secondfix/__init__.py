"""Secondfix: the integrator's book for the switches of a house."""
