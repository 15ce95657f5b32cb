"""Sentences for people, looked up by code; a shell translates and fills them in."""
