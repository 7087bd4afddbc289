//! Mass attenuation: how much of the signal of a thick piece a thinner one gives.
