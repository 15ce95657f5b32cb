"""How everything looks: tokens, fonts, signs, style."""
