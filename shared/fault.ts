/** Codes by which a fault is matched; the words are for people. */
export type FaultCode =
  | 'bad input'
  | 'bad passage'
  | 'not allowed'
  | 'not found'
  | 'wrong time'
  | 'too long'
  | 'in use'
  | 'disk'
  | 'platform'
  | 'configuration'
  | 'usage';

/** An expected failure: "Cannot do X, expected A, got B", with a remedy. Never holds a pupil's words or a token. */
export class Fault extends Error {
  readonly code: FaultCode;
  readonly remedy: string;
  constructor(code: FaultCode, message: string, remedy: string) {
    super(message);
    this.name = 'Fault';
    this.code = code;
    this.remedy = remedy;
  }
}
