/** Each promise of the log, tried on the whole program: the server as a process, over HTTP, killed and damaged. */
package wisp.promise;
