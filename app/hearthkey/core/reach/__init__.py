"""The network plan: what can be worked out about the way in from outside before anything is measured."""
