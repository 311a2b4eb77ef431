import { ipc2018 } from './ipc-2018/profile.ts';
import { irc2021 } from './irc-2021/profile.ts';
import type { Profile } from './profile.ts';

export const profiles = {
  'ipc-2018': ipc2018,
  'irc-2021': irc2021,
} as const satisfies Record<string, Profile>;

export type ProfileId = keyof typeof profiles;
