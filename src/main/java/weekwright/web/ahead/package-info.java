/** The first sheet: what lands when, which publication day is safe, what has to be bought, in sentences and one picture. */
package weekwright.web.ahead;
