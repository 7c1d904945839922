/**
 * What is used of `soundswallower` (MIT): the documented module, and those of its C functions (all
 * exported by it) that take a model from memory and a grammar as FSG, for which it has no method.
 */
import type { SoundSwallowerModule } from "soundswallower";

export interface DecoderModule extends SoundSwallowerModule {
  _malloc(bytes: number): number;
  _free(address: number): void;
  HEAPU8: Uint8Array;
  HEAP32: Int32Array;
  /** Memory as a file; freeing the file does not free the memory. 0 on failure. */
  _s3file_init(address: number, bytes: number): number;
  _s3file_free(file: number): number;
  _bin_mdef_read_s3file(file: number, contextIndependent: number): number;
  _tmat_init_s3file(file: number, logmath: number, floor: number): number;
  _set_mdef(decoder: number, mdef: number): void;
  _set_tmat(decoder: number, tmat: number): void;
  _load_gmm(d: number, means: number, variances: number, mixw: number, sendump: number): number;
  _decoder_logmath(decoder: number): number;
  _decoder_init_cleanup(decoder: number): number;
  _decoder_init_fe(decoder: number): number;
  _decoder_init_feat_s3file(decoder: number, transform: number): number;
  _decoder_init_acmod_pre(decoder: number): number;
  _decoder_init_acmod_post(decoder: number): number;
  _decoder_init_dict_s3file(decoder: number, words: number, fillers: number): number;
  _decoder_init_grammar_s3file(decoder: number, fsg: number, jsgf: number): number;
  _decoder_hyp(decoder: number, scoreAddress: number): number;
}

/** The parts of the acoustic model, by the names they have in the package. */
export const MODEL_PARTS = [
  "feat_params.json",
  "mdef",
  "means",
  "variances",
  "sendump",
  "transition_matrices",
  "noisedict.txt",
] as const;

export type ModelFiles = Readonly<Record<(typeof MODEL_PARTS)[number], Uint8Array>>;
