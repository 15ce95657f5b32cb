"""The shape of waitress 3 as far as hearthkey uses it; the package carries no types of its own."""
