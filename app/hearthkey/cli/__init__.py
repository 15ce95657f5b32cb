"""The command line, a shell over the services."""
