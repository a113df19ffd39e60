/*
 * Stand-ins for the four helpers of opencv-wasm's glue that build functions from text, which a page without
 * `unsafe-eval` may not do. Their text is put in place of the originals (patchOpenCv.ts), so they see the names
 * around those: signature, rawFunction, runDestructors, throwBindingError, makeLegalFunctionName and __emval_….
 * Emscripten's own build without dynamic execution works the same way.
 */
/* biome-ignore-all lint/correctness/noUnusedVariables: used by name as text */
/* biome-ignore-all lint/complexity/useArrowFunction: constructors and methods need their own `this` */

/** Gives a function a name and keeps it a constructor. */
function createNamedFunction(name, body) {
  const named = function (...given) {
    return body.apply(this, given);
  };
  return Object.defineProperty(named, 'name', { value: makeLegalFunctionName(name) });
}

/** Binds a function pointer to the dispatcher of its signature; short forms spare the hot paths an array. */
function makeDynCaller(dynCall) {
  switch (signature.length) {
    case 1:
      return () => dynCall(rawFunction);
    case 2:
      return (a) => dynCall(rawFunction, a);
    case 3:
      return (a, b) => dynCall(rawFunction, a, b);
    case 4:
      return (a, b, c) => dynCall(rawFunction, a, b, c);
    default:
      return (...given) => dynCall(rawFunction, ...given);
  }
}

/** Turns a C++ function into a JavaScript one: checks the number of arguments, converts, calls, cleans up. */
function craftInvokerFunction(humanName, argTypes, classType, invoker, target) {
  if (argTypes.length < 2) throwBindingError('A function without a return type and a class cannot be bound.');
  const [returnType, thisType, ...givenTypes] = argTypes;
  const isMethod = thisType !== null && classType !== null;
  const wiredTypes = isMethod ? [thisType, ...givenTypes] : givenTypes;
  const needsStack = argTypes.some(
    (type, i) => i > 0 && type !== null && type.destructorFunction === undefined,
  );
  const invoke = function (...given) {
    if (given.length !== givenTypes.length) {
      throwBindingError(
        `function ${humanName} called with ${given.length} arguments, expected ${givenTypes.length} args!`,
      );
    }
    const destructors = needsStack ? [] : null;
    const values = isMethod ? [this, ...given] : given;
    const wired = values.map((value, i) => wiredTypes[i].toWireType(destructors, value));
    const result = invoker(target, ...wired);
    if (needsStack) runDestructors(destructors);
    else for (const [i, type] of wiredTypes.entries()) type.destructorFunction?.(wired[i]);
    return returnType.name === 'void' ? undefined : returnType.fromWireType(result);
  };
  return Object.defineProperty(invoke, 'name', { value: makeLegalFunctionName(humanName) });
}

/** Makes the function through which C++ calls a method of a JavaScript object. */
function __emval_get_method_caller(argCount, argTypes) {
  const [returnType, ...givenTypes] = __emval_lookupTypes(argCount, argTypes);
  return __emval_addMethodCaller((object, name, destructors, address) => {
    let offset = 0;
    const values = givenTypes.map((type) => {
      const value = type.readValueFromPointer(address + offset);
      offset += type.argPackAdvance;
      return value;
    });
    const result = object[name](...values);
    givenTypes.forEach((type, i) => {
      type.deleteObject?.(values[i]);
    });
    return returnType.isVoid ? undefined : returnType.toWireType(destructors, result);
  });
}
