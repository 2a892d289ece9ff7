"""Line drawings of our own, for the bench and for home: black on white, in words too."""
