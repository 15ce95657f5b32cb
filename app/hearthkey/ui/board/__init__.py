"""The sheet: people down, time across."""
