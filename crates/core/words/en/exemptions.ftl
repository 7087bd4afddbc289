# Exemptions and claims.
