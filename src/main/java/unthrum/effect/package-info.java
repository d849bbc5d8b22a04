/** What a layup does to a panel and to the whole vehicle: values before and after, each with how sure it is. */
package unthrum.effect;
