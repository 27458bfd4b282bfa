package main

// version is that of the program; the file's format has its own, see
// record.Format.
const version = "0.1.0"
