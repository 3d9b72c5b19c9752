/** Styles of a part that is fetched later come with its script. */
declare module "*.css";
