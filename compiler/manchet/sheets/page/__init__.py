"""What any page needs: its house and issue, measures, words, and the writers of HTML, PDF and JSON."""
