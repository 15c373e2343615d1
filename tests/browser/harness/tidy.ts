import { afterAll } from 'vitest';
import { closeAll } from './open.ts';

afterAll(closeAll);
