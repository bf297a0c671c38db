/** The dialog that is open over the orders. */
export type AskedOfOrders = { readonly is: 'new' } | { readonly is: 'receive'; readonly order: string } | undefined;
