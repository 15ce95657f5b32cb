"""Values to bytes and back: never a path, never a picture."""
