/**
 * What every page is made with: the page contract, the reader of posted forms, keys against forged and repeated posts,
 * answers, the sheets of what went wrong, and the guard in front of all of it. In comes an HTTP request, out goes an
 * answer with the whole header set. A page never touches the web library itself.
 */
package weekwright.web.kit;
