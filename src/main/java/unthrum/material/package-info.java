/** The catalogue: generic, unbranded materials with their properties and how far each is to be trusted. */
package unthrum.material;
