/** Everything that reads what others wrote, fed with seeded mutations of a corpus: each is refused in words or read, nothing fails. */
package weekwright.fuzz;
