"""The desk: one device after the other, in large type, turned to whoever it is for."""
