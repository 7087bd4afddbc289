# Decisions: sigma, repeats, probabilities, decision rules, time, next steps and working.
