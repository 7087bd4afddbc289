//! Upper bounds that an element sets on a compound that holds it. Never a result.
