# Help where one stands: terms, the guide, the tour, shortcuts, the diagnostic file.
