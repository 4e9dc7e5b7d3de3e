/** The public build log: what is public, its pages and feed, and how they are written as a static site. */
package weekwright.site;
