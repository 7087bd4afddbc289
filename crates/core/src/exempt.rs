//! Exemptions with their dates, and claims that one covers a material.
