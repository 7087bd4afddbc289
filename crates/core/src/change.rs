//! Change of material: is this lot's composition that of the part's accepted lots?
