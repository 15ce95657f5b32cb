"""What is true: frozen values, decisions and plans. Standard library only."""
