/** Why an order is not taken, by the notice's key; each says what can be. */
export const orderRefused = {
  orderNoDay: 'There is no such day. Choose another one.',
  orderPast: 'That day is over. Choose today or a later one.',
  orderNobody: 'Nobody of that name is in the circle. Choose who it is for.',
  orderNoHour: 'There is no such hour. Choose another one.',
  orderEmpty: 'No bread is on it yet. Choose one.',
  orderNoBread: 'That bread is not in the Book. Choose another one.',
  orderCount: 'So many cannot be taken. Take {least} to {most} of a bread.',
  orderWeight: 'No loaf of that weight can be taken. Choose {least} to {most}.',
} as const;

/** What is asked before an order is taken, by the notice's key. */
export const orderAsked = {
  watchNamed: '{name} has {allergens} in it. It is on their list.',
  watchOpen: '{name} may have {allergens} in it. Look at the packet.',
  watchUnknown: '{name}: not known what is in {filling}. Ask the packet.',
  orderClosed: 'Orders for that day closed at {time} on {date}.',
  orderHourPast: 'That hour is past already.',
  orderTwice: 'They have an order on that day already.',
} as const;
