"""Packets: one link's chance both ways, with acknowledgement, tries and interference."""
