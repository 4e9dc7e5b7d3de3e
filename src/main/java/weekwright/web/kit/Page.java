package weekwright.web.kit;

/**
 * One page: one address, shown by GET and, where it has a form, submitted by POST to the same address. Its template reads
 * the view as {@code page}; template and class are found from the address, see {@link PageName}. A page is made once and
 * holds no state of a request; several threads call it at a time.
 */
public interface Page {

    /**
     * What the template shows. A form that was refused is shown by the same method: {@link Request#form(String)} then
     * holds what was typed and what is wrong with it.
     *
     * @return a record, nested in the page and named View
     * @throws NotFound when the address names a thing that does not exist
     */
    Record show(Request request);

    /**
     * Does what a posted form asks for, nearly always by {@link Request#save}.
     *
     * @throws weekwright.base.Rejected when the form cannot be accepted: the page is shown again with status 422
     * @throws weekwright.db.Stale when somebody else changed the row meanwhile: both versions are shown with status 409
     */
    default Answer submit(Request request) throws Exception {
        throw new UnsupportedOperationException(getClass() + " takes no posts");
    }
}
