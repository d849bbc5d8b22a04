/** What was found and measured on the vehicle: the records of a survey file and its reader. */
package unthrum.survey;
