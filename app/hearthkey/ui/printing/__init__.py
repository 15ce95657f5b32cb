"""Paper: a sheet as it is seen, printed and saved as PDF, all by one painter."""
