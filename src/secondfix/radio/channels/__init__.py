"""Which channel a network at 2.4 GHz does best on, among those who send there too."""
