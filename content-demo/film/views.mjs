/** Where the camera stands for each shot, in inches; angles in degrees from top to bottom of the picture. */
export const wide = { eye: [4.1, 7.6, 17], target: [-1.25, 1.95, 0], angle: 22 };
export const gap = { eye: [-4.9, 6.6, 9.0], target: [-2.7, 3.35, 0.2], angle: 30 };
export const joint = { eye: [3.4, 8.6, 6.4], target: [0.1, 4.45, 0.1], angle: 21 };
export const front = { eye: [13, 8.4, 12.2], target: [1.15, 1.55, 0.35], angle: 26 };
export const near = { eye: [12, 6.8, 10.4], target: [0.6, 2.2, -0.15], angle: 23.5 };
export const keyView = { eye: [7.0, 5.6, 5.0], target: [-0.3, 2.85, 0], angle: 21 };
export const side = { eye: [0.6, 8.0, 17], target: [-3.7, 1.8, 0], angle: 25 };
export const section = { eye: [6.4, 6.8, 11.2], target: [-0.35, 2.65, 0], angle: 23 };
export const pressing = { eye: [3.4, 7.6, 11.6], target: [-0.2, 2.7, 0], angle: 23 };
export const torque = { eye: near.eye, target: [0.9, 2.75, -0.5], angle: 27 };
export const crossing = { eye: front.eye, target: [0.8, 2.3, 0.2], angle: 28 };
export const shaftView = { eye: [7.2, 6.0, 9.4], target: [-0.2, 2.75, 0.2], angle: 33 };
export const washerView = { eye: [2.6, 5.4, 9.0], target: [1.1, 2.15, 0], angle: 28 };
export const desk = { eye: [0.2, 10, 7.4], target: [0.1, 0, 0.1], angle: 30 };
export const drain = { eye: [6.8, 5.4, 7.6], target: [1.15, 0.45, 0.7], angle: 28 };
export const bath = { eye: [5.2, 8.6, 11.4], target: [0.2, 1.55, 0], angle: 33 };
export const drainStanding = { eye: [9.6, 4.6, 8.4], target: [1.2, 1.5, 0.5], angle: 32 };
