import { published, type Source } from '../../cloth/source.ts';

type Book = (where: string) => Source;

/** Advice on fitting dresses, in parts. */
export const fittingDresses: Book = (where) =>
  published('Fitting Dresses', '1946', `US Department of Agriculture, ${where}`);
/** A leaflet on common fitting problems. */
export const garmentFitting: Source = published(
  'Garment Fitting',
  '1962',
  'Hazel L. Roberts, Washington State University Extension, E.M. 2246, common fitting problems',
);
/** A handbook of dressmaking. */
export const newDressmaker: Book = (where) => published('The New Dressmaker, Butterick', '1921', where);
/** A textbook of a school of home economics. */
export const watson: Book = (where) => published('Textiles and Clothing, Watson', '1907', where);
/** A handbook of needlework. */
export const dillmont: Book = (where) => published('Encyclopedia of Needlework, Dillmont', 'undated', where);
/** A textbook of dress construction. */
export const baldt: Book = (where) => published('Clothing for Women, Baldt', '1916', where);
/** A course of lessons. */
export const conover: Book = (where) =>
  published('A Complete Course in Dressmaking', '1921', `Isabel DeNyse Conover, ${where}`);
/** A chapter on the use of patterns; the copy that was read shows neither book nor year. */
export const patternManual: Book = (where) =>
  published('The Use of Butterick Patterns, dressmaking manual', 'undated', where);
/** A survey of how hard leggings press. */
export const leggings: Source = published(
  'Clothing pressure analysis of commercial women’s leggings, Fashion and Textiles',
  '2022',
  'abstract',
);
/** A survey of bodies: what follows from its rows. */
export const bodySurvey: Book = (where) =>
  published('ANSUR II, US Army survey of 6,068 adults', '2012', where);
