/** The presses that somebody new makes until all phrases follow each other: `ear-enrol.test` counts them. */
export const TO_A_VOICE = 5;
