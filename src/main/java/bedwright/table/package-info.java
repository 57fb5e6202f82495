/**
 * Tables as a spreadsheet holds them: cells in rows under a row of heads, as CSV files and as one workbook.
 *
 * <p>What stands in the cells and what it means others know. In and out go bytes.
 */
@NullMarked
package bedwright.table;

import org.jspecify.annotations.NullMarked;
