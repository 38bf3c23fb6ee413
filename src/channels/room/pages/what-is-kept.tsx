import { keeping, keepingForFamilies } from '../../../../shared/keeping.js';
import { say } from '../words.js';

/** What is kept, told to families; the same for everybody, so that it holds nothing of any class. */
export function WhatIsKept() {
  const { first, adults, show, erase, settings } = keepingForFamilies;
  return (
    <>
      <p>{first}</p>
      <p>{adults}</p>
      <ul class="list">
        {keeping.flatMap(({ families }) => (families === null ? [] : [<li>{families}</li>]))}
      </ul>
      <p>{show}</p>
      <p>{erase}</p>
      <p>{settings}</p>
      <p>
        <a class="button" href="/">
          {say('back to my page')}
        </a>
      </p>
    </>
  );
}
