/** What tests of several rooms share. */
package merese.testing;
