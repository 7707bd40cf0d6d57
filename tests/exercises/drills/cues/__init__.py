"""What gives an answer away to somebody who knows nothing, measured over many questions."""
