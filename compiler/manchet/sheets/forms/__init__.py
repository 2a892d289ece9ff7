"""The printed forms, one folder each: what it shows, its template, its words, and `FORM`, which says what it is."""
