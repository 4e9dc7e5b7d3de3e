/** The film side: episodes and the tasks they tell, shots and clips. */
package weekwright.episodes;
