// The bundler takes the word catalogues in as text.
declare module "*.ftl" {
  const text: string;
  export default text;
}

// A style sheet as its text.
declare module "*.css" {
  const text: string;
  export default text;
}
