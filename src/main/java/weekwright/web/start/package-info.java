/** The pages of a folder that holds no project yet: a new one, plain files, or a copy of the sample. */
package weekwright.web.start;
