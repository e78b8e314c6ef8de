import { networkInterfaces } from 'node:os';
import { addressesOf } from './addresses.ts';

/** The addresses under which other devices find this machine now; a network may have been joined since the start. */
export const addressesNow = (port: number): readonly string[] => addressesOf(networkInterfaces(), port);
