"""The verbs of the household."""
