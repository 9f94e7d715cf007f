package catalogue

// all is every calculator, in the order of the work.
var all = []Calculator{}
