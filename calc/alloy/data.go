package alloy

var all = []*Alloy{}
