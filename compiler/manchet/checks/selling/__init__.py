"""What has to be known before a food that is packed can be labelled."""
